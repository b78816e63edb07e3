import type { Action } from './action.ts';

export const goLedger: Action = {
  name: 'go-ledger',
  label: () => 'Go to Ledger',
  shortcut: 'Alt+7',
  when: () => true,
  perform: (scene) => scene.go('/ledger'),
};
