import { useQuery } from '@tanstack/react-query';
import type { Template } from '../../../../core/contract/templates.ts';
import { formatInWords } from '../../../../core/deliverables/format-words.ts';
import { dueInWords, roundsInWords, workInWords } from '../../../../core/deliverables/template-words.ts';
import { ask } from '../../../ask.ts';
import table from '../../../parts/table.module.css';
import style from '../../../parts/sheet.module.css';

/** What I deliver: the templates that promised edits are made from. */
export function Templates() {
  const templates = useQuery(ask.templates.list.queryOptions({ input: {} })).data?.templates;
  if (!templates) return null;
  return (
    <section className={style.apart} aria-labelledby="templates">
      <div className={style.head}>
        <h2 id="templates">What I deliver</h2>
        <a href="#/rates/new-template">New template</a>
      </div>
      {templates.length === 0 ? (
        <p className={style.second}>
          No template yet. A template says how long a film is, what work it takes and when it is due; what is promised is made from it.
        </p>
      ) : (
        <div className={table.scroll}>
          <table className={`${table.table} ${table.named}`}>
            <thead>
              <tr>
                <th scope="col">Template</th>
                <th scope="col">Length and work</th>
                <th scope="col">Rounds</th>
                <th scope="col">Due</th>
                <th scope="col">Format</th>
                <th scope="col" className={table.figures}>
                  Used
                </th>
              </tr>
            </thead>
            <tbody>
              {templates.map((template) => (
                <Row key={template.id} template={template} />
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}

function Row({ template }: { template: Template }) {
  return (
    <tr>
      <th scope="row">
        <a href={`#/rates/template/${template.id}`}>{template.name}</a>
      </th>
      <td className={table.whole}>{workInWords(template)}</td>
      <td>{roundsInWords(template)}</td>
      <td>{dueInWords(template.due)}</td>
      <td>{formatInWords(template.format) || 'not said'}</td>
      <td className={table.figures}>{template.uses}</td>
    </tr>
  );
}
