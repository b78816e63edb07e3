import { Label, Radio, RadioGroup } from 'react-aria-components';
import style from './segments.module.css';

/** One of a few words in a row; the chosen one is bold and underlined. */
export function Segments<T extends string>(props: {
  label: string;
  /** Null where none of them is so. */
  value: T | null;
  options: readonly { value: T; label: string }[];
  onChange: (value: T) => void;
  bare?: boolean;
}) {
  return (
    <RadioGroup
      orientation="horizontal"
      className={style.group ?? ''}
      value={props.value}
      onChange={(value) => {
        const chosen = props.options.find((option) => option.value === value);
        if (chosen) props.onChange(chosen.value);
      }}
    >
      <Label className={props.bare ? 'reader' : (style.label ?? '')}>{props.label}</Label>
      <span className={style.words}>
        {props.options.map((option) => (
          <Radio key={option.value} value={option.value} className={style.word ?? ''}>
            {option.label}
          </Radio>
        ))}
      </span>
    </RadioGroup>
  );
}
