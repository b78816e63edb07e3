import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ComboBox, FieldError, Input, Label, ListBox, ListBoxItem, Popover } from 'react-aria-components';
import type { Place } from '../../core/contract/parts.ts';
import { ask } from '../ask.ts';
import list from './choice.module.css';
import field from './field.module.css';

/** "Duluth, Minnesota, US": what tells a place from its namesakes. */
export const placeInWords = (place: Place): string => [place.name, place.region, place.country].filter((part) => part !== '').join(', ');

/** A place found in the gazetteer while its name is typed. What is typed but not found can be taken as a place of one's own. */
export function PlaceField(props: {
  label: string;
  value: Place | null;
  onChange: (place: Place) => void;
  error?: string | undefined;
  bare?: boolean;
}) {
  const [typed, setTyped] = useState<string | null>(null);
  const text = typed ?? (props.value ? placeInWords(props.value) : '');
  const found = useQuery(
    ask.places.search.queryOptions({
      input: { text: text.slice(0, 100), limit: 8 },
      enabled: typed !== null && typed.trim().length > 1,
      placeholderData: (before) => before,
    }),
  );
  const places = typed !== null && typed.trim().length > 1 ? (found.data?.places ?? []) : [];
  return (
    <ComboBox
      className={field.field ?? ''}
      inputValue={text}
      onInputChange={(next) => {
        if (next !== text) setTyped(next);
      }}
      items={places}
      selectedKey={null}
      onSelectionChange={(key) => {
        const place = places.find((each) => each.key === key);
        if (!place) return;
        const { kind: _kind, people: _people, ...chosen } = place;
        setTyped(null);
        props.onChange(chosen);
      }}
      onBlur={() => setTyped(null)}
      allowsCustomValue
      allowsEmptyCollection={typed !== null}
      menuTrigger="input"
      validationBehavior="aria"
      isInvalid={props.error !== undefined}
    >
      <Label className={props.bare ? 'reader' : (field.label ?? '')}>{props.label}</Label>
      <Input className={field.input ?? ''} placeholder="Begin to type a town" />
      <FieldError className={field.error ?? ''}>{props.error ? `${props.label.split(',')[0]} ${props.error}.` : null}</FieldError>
      <Popover className={list.popover ?? ''}>
        <ListBox
          className={list.list ?? ''}
          renderEmptyState={() => (
            <p className={list.empty}>
              {text.trim().length < 2
                ? 'Type two letters or more.'
                : found.isFetching
                  ? 'Looking …'
                  : 'No town of that name is known. Try the nearest larger one.'}
            </p>
          )}
        >
          {(place: (typeof places)[number]) => (
            <ListBoxItem id={place.key} textValue={placeInWords(place)} className={list.item ?? ''}>
              {place.name}{' '}
              <span className={list.second}>{[place.region, place.country, place.zone].filter((part) => part !== '').join(', ')}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
