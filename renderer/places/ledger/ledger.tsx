import type { ReactNode } from 'react';
import { Segments } from '../../parts/segments.tsx';
import { sceneNow } from '../../scene.ts';
import look from '../../parts/list.module.css';
import { Earned } from './earned.tsx';
import { Logs } from './logs.tsx';
import { Owed } from './owed.tsx';
import { Year } from './year.tsx';

type Page = 'owed' | 'earned' | 'year' | 'logs';
const pages: Record<Page, { label: string; path: string; shown: () => ReactNode }> = {
  owed: { label: 'owed to me', path: '/ledger', shown: () => <Owed /> },
  earned: { label: 'earned per hour', path: '/ledger/earned', shown: () => <Earned /> },
  year: { label: 'the year', path: '/ledger/year', shown: () => <Year /> },
  logs: { label: 'logs and tables', path: '/ledger/logs', shown: () => <Logs /> },
};
const options = (['owed', 'earned', 'year', 'logs'] as const).map((value) => ({ value, label: pages[value].label }));

/** Ledger: who owes me, what did it earn? */
export function LedgerPlace({ page }: { page: Page }) {
  return (
    <div className={look.list}>
      <div className={look.head}>
        <h1 className={look.title}>Ledger</h1>
        <Segments label="Part of the ledger" bare value={page} options={options} onChange={(next) => sceneNow().go(pages[next].path)} />
      </div>
      {pages[page].shown()}
    </div>
  );
}
