import type { Knows } from '../contract/knows.ts';

const unasked = () => ({ asked: false, due: null, sentOn: null, detail: '' });

/** A job of which nothing is known yet. */
export function blankKnows(): Knows {
  return {
    payer: '',
    billingAddress: '',
    purchaseOrder: { required: false, number: '' },
    taxForm: unasked(),
    insurance: unasked(),
    confidentiality: { mayShow: null, until: null, detail: '' },
    onSite: [],
    dock: '',
    access: '',
    power: '',
    network: '',
    dress: '',
    meals: '',
    wetWeather: '',
    sessions: '',
    mustHave: '',
    names: '',
    music: '',
    usage: '',
    originals: '',
    cutsApprover: '',
    overtimeApprover: '',
  };
}
