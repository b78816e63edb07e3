import type { ReactNode } from 'react';
import { FieldError, Input, Label, Text, TextArea, TextField, type TextFieldProps } from 'react-aria-components';
import style from './field.module.css';

export type FieldProps = Omit<TextFieldProps, 'children' | 'className' | 'style' | 'isInvalid'> & {
  label: string;
  /** The sentence that says what is wrong. */
  error?: string | undefined;
  hint?: ReactNode;
  /** What the number counts, set behind the input. */
  unit?: string;
  rows?: number;
  /** Numbers stand at the right. */
  figures?: boolean;
  /** The label is read out but not drawn, where the place says it already. */
  bare?: boolean;
  placeholder?: string;
};

/** A labelled input with its hint and its trouble below it. */
export function Field({ label, error, hint, unit, rows, figures = false, bare = false, placeholder, ...props }: FieldProps) {
  const input = `${style.input} ${figures ? style.figures : ''}`;
  return (
    <TextField {...props} validationBehavior="aria" isInvalid={error !== undefined} className={style.field ?? ''}>
      <Label className={bare ? 'reader' : (style.label ?? '')}>{label}</Label>
      <span className={style.row}>
        {rows ? (
          <TextArea rows={rows} className={input} {...(placeholder ? { placeholder } : {})} />
        ) : (
          <Input className={input} {...(placeholder ? { placeholder } : {})} />
        )}
        {unit ? <span className={style.unit}>{unit}</span> : null}
      </span>
      {hint ? (
        <Text slot="description" className={style.hint ?? ''}>
          {hint}
        </Text>
      ) : null}
      <FieldError className={style.error ?? ''}>{error ? `${label} ${error}`.replace(/\.*$/, '.') : null}</FieldError>
    </TextField>
  );
}
