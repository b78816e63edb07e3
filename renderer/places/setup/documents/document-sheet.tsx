import { useQuery } from '@tanstack/react-query';
import { DocumentKind } from '../../../../core/contract/document-kind.ts';
import type { Hand } from '../../../../core/contract/people.ts';
import { documentInWords } from '../../../../core/documents/words.ts';
import { blankDocument } from '../../../../core/documents/blank.ts';
import { ask } from '../../../ask.ts';
import { client } from '../../../door.ts';
import { Asked } from '../../../parts/asked.tsx';
import { Empty } from '../../../parts/empty.tsx';
import { Group } from '../../../parts/group.tsx';
import { ListedSheet } from '../../../parts/listed-sheet.tsx';
import sheet from '../../../parts/sheet.module.css';
import { useKeptForm } from '../../../parts/use-kept-form.ts';
import { WhenAndWhere, WhoseAndWhat } from './document-fields.tsx';
import { Scan } from './scan.tsx';
import { documentInLabels, documentKind, fieldsOf, named, type NamedDocument } from './typed-document.ts';

/** One document, whole; without an id a new one. @param kind of a new one */
export function DocumentPlace({ id, kind }: { id?: string; kind?: string }) {
  const asked = useQuery(ask.documents.list.queryOptions({ input: {} }));
  const hands = useQuery(ask.people.hands.queryOptions({ input: {} }));
  const setup = useQuery(ask.setup.get.queryOptions({ input: {} }));
  return (
    <Asked asked={setup}>
      {({ setup: mine }) => (
        <Asked asked={hands}>
          {({ hands: all }) => (
            <Asked asked={asked}>
              {({ documents }) => {
                const stored = documents.find((document) => document.id === id);
                if (id !== undefined && !stored)
                  return (
                    <Empty title="Documents">
                      This document is not on file. <a href="#/setup">All documents</a>
                    </Empty>
                  );
                const of = DocumentKind.safeParse(kind).data ?? 'passport';
                return <DocumentSheet currency={mine?.currency ?? 'USD'} hands={all} kind={of} stored={stored && named(stored)} />;
              }}
            </Asked>
          )}
        </Asked>
      )}
    </Asked>
  );
}

function DocumentSheet(props: { stored: NamedDocument | undefined; kind: DocumentKind; hands: readonly Hand[]; currency: string }) {
  const { stored, kind, hands, currency } = props;
  const form = useKeptForm(documentKind(currency), stored ?? blankDocument(kind), stored);
  return (
    <ListedSheet
      kind="document"
      title={stored?.name ?? `New ${documentInWords(form.typed.kind, null)}`}
      back={{ path: '/setup', name: 'Setup, documents' }}
      stored={stored}
      form={form}
      inWords={documentInLabels}
      drop={({ id, version }) => client.documents.drop({ id, version })}
      putBack={async (before) => {
        const { document } = await client.documents.save({ fields: fieldsOf(before) });
        if (before.scan) await client.documents.putScan({ id: document.id, version: document.version, scanId: before.scan.id });
      }}
      keepAgain={(before, { id, version }) => client.documents.save({ id, version, fields: fieldsOf(before) })}
    >
      <Group title="What it is">
        <WhoseAndWhat form={form} hands={hands} />
      </Group>
      <Group title="When and where">
        <WhenAndWhere form={form} />
      </Group>
      <Group title="Scan">
        {stored ? <Scan document={stored} /> : <p className={sheet.second}>Save the document first; its scan can be put with it then.</p>}
      </Group>
    </ListedSheet>
  );
}
