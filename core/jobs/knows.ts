import type { Knows } from '../contract/knows.ts';
import type { ClientFields } from '../contract/people.ts';

const unasked = () => ({ asked: false, due: null, sentOn: null, detail: '' });

/** A job of which nothing is known yet. */
export function blankKnows(): Knows {
  return {
    payer: '',
    billingAddress: '',
    purchaseOrder: { required: false, number: '' },
    taxForm: unasked(),
    insurance: { ...unasked(), named: '', limit: null, askedOn: null },
    needs: [],
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

/** What was kept of a job, whole: what came to be known of jobs later is blank on one from before. */
export function wholeKnows(kept: Knows | null): Knows {
  const blank = blankKnows();
  return kept ? { ...blank, ...kept, insurance: { ...blank.insurance, ...kept.insurance } } : blank;
}

/** What the client always asks for is asked on the job too; what was asked already, or is sent, stays as it is. */
export function withAsked(knows: Knows, asks: ClientFields['asks']): Knows {
  return {
    ...knows,
    purchaseOrder: { ...knows.purchaseOrder, required: knows.purchaseOrder.required || asks.purchaseOrder },
    taxForm: { ...knows.taxForm, asked: knows.taxForm.asked || asks.taxForm },
    insurance: { ...knows.insurance, asked: knows.insurance.asked || asks.insurance },
    confidentiality: { ...knows.confidentiality, mayShow: knows.confidentiality.mayShow ?? (asks.confidentiality ? false : null) },
  };
}
