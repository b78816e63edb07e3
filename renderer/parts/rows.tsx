import { Button } from './button.tsx';
import { Choice } from './choice.tsx';
import { Field } from './field.tsx';
import style from './rows.module.css';

export type Column<K extends string> = {
  key: K;
  label: string;
  figures?: boolean;
  type?: 'date';
  placeholder?: string;
  /** Chosen from these instead of typed. */
  options?: readonly { value: string; label: string }[];
};

/** A short list that is typed row by row: every row can be taken out, and one more put at the end. */
export function Rows<K extends string>(props: {
  label: string;
  columns: readonly Column<K>[];
  rows: readonly Record<K, string>[];
  onChange: (rows: Record<K, string>[]) => void;
  blank: Record<K, string>;
  /** The words that put one more row at the end; none where no more are kept. */
  add?: string;
  error: (at: number, key: K) => string | undefined;
}) {
  const { rows, columns, onChange } = props;
  const set = (at: number, key: K, value: string): void =>
    onChange(rows.map((row, index) => (index === at ? { ...row, [key]: value } : row)));
  return (
    <fieldset className={style.rows}>
      <legend className={style.label}>{props.label}</legend>
      {rows.length > 0 ? (
        <div className={style.heads} aria-hidden>
          {columns.map((column) => (
            <span key={column.key} className={column.figures ? style.figures : undefined}>
              {column.label}
            </span>
          ))}
          <span className={style.out} />
        </div>
      ) : null}
      {rows.map((row, at) => (
        <div key={`row ${at + 1}`} className={style.row}>
          {columns.map((column) => (
            <div key={column.key} className={column.figures ? style.narrow : undefined}>
              <Cell
                column={column}
                label={`${props.label}, row ${at + 1}: ${column.label}`}
                value={row[column.key]}
                onChange={(value) => set(at, column.key, value)}
                error={props.error(at, column.key)}
              />
            </div>
          ))}
          <span className={style.out}>
            <Button
              kind="quiet"
              onPress={() => onChange(rows.filter((_, index) => index !== at))}
              aria-label={`Take out row ${at + 1} of ${props.label}`}
            >
              Take out
            </Button>
          </span>
        </div>
      ))}
      {props.add ? (
        <div>
          <Button kind="quiet" onPress={() => onChange([...rows, props.blank])}>
            {props.add}
          </Button>
        </div>
      ) : null}
    </fieldset>
  );
}

function Cell<K extends string>({
  column,
  ...cell
}: {
  column: Column<K>;
  label: string;
  value: string;
  onChange: (value: string) => void;
  error: string | undefined;
}) {
  if (column.options) return <Choice bare options={column.options} {...cell} />;
  return (
    <Field
      bare
      type={column.type ?? 'text'}
      figures={column.figures ?? false}
      {...(column.placeholder ? { placeholder: column.placeholder } : {})}
      {...cell}
    />
  );
}
