import { Button, FieldError, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';
import field from './field.module.css';
import style from './choice.module.css';

/** One of a few, out of a list that opens. */
export function Choice<T extends string>(props: {
  label: string;
  value: T;
  options: readonly { value: T; label: string }[];
  onChange: (value: T) => void;
  error?: string | undefined;
  bare?: boolean;
}) {
  return (
    <Select
      className={field.field ?? ''}
      selectedKey={props.value}
      onSelectionChange={(key) => {
        const chosen = props.options.find((option) => option.value === key);
        if (chosen) props.onChange(chosen.value);
      }}
      validationBehavior="aria"
      isInvalid={props.error !== undefined}
    >
      <Label className={props.bare ? 'reader' : (field.label ?? '')}>{props.label}</Label>
      <Button className={style.opener ?? ''}>
        <SelectValue />
        <span aria-hidden>▾</span>
      </Button>
      <FieldError className={field.error ?? ''}>{props.error}</FieldError>
      <Popover className={style.popover ?? ''}>
        <ListBox className={style.list ?? ''}>
          {props.options.map((option) => (
            <ListBoxItem key={option.value} id={option.value} textValue={option.label} className={style.item ?? ''}>
              {option.label}
            </ListBoxItem>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
