import { passportRulesOnFile, sourceInWords } from '../../../../core/documents/rules.ts';
import { countInWords } from '../../../../core/words/amounts.ts';
import { countryInWords } from '../../../../core/words/countries.ts';
import { paperDate } from '../../../../core/words/dates.ts';
import { joined } from '../../../../core/words/lists.ts';
import { Fold } from '../../../parts/fold.tsx';
import table from '../../../parts/table.module.css';

/** So many passports are named; more are counted. */
const NAMED = 3;

const passportsOf = (codes: readonly string[]): string =>
  codes.length > NAMED ? `the ${codes.length} countries on that list` : joined(codes.map(countryInWords));

/** What the program has on file of what countries ask of a passport, with where and when it was read. */
export function OnFile() {
  return (
    <Fold title="What is on file of passports">
      <div className={table.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Country</th>
              <th scope="col">Asks</th>
              <th scope="col">Read where</th>
            </tr>
          </thead>
          <tbody>
            {passportRulesOnFile().map(({ of, months, whose, these, source }) => (
              <tr key={`${of.join()} ${months} ${these.join()}`}>
                <th scope="row">
                  {of
                    .map(countryInWords)
                    .sort((a, b) => (a < b ? -1 : 1))
                    .join(', ')}
                </th>
                <td>
                  {months === 0 ? 'valid for the stay' : `${countInWords(months, 'month')} beyond leaving`}
                  {whose === 'all' ? '' : `, of passports ${whose === 'these' ? 'of' : 'but those of'} ${passportsOf(these)}`}
                </td>
                <td className={table.second}>{sourceInWords(source, paperDate(source.on))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={table.second}>Of every other country nothing is on file: ask its embassy and the carrier. Rules change.</p>
    </Fold>
  );
}
