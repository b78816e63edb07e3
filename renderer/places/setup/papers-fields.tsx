import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FileField } from '../../parts/file-field.tsx';
import { Segments } from '../../parts/segments.tsx';
import { fieldTrouble } from '../../trouble.ts';
import type { SetupPart } from './identity-fields.tsx';
import { readPicture } from './picture-file.ts';
import style from './setup.module.css';

const inks = [
  { value: '', label: 'none' },
  { value: '#2f5877', label: 'blue' },
  { value: '#4f6637', label: 'green' },
  { value: '#7a2f4b', label: 'wine' },
  { value: '#8a5a12', label: 'ochre' },
] as const;
const isInk = (accent: string): boolean => inks.some(({ value }) => value === accent);
const isColour = (text: string): boolean => /^#[0-9a-f]{6}$/i.test(text);

/** What my papers wear: a picture at the top, and one colour for their rules. */
export function PapersFields(part: SetupPart) {
  return (
    <>
      <Picture {...part} />
      <Accent {...part} />
    </>
  );
}

function Picture({ typed, change, trouble }: SetupPart) {
  const [refused, setRefused] = useState('');
  const wrong = refused || fieldTrouble(trouble, 'logo.base64');
  const choose = async (file: File): Promise<void> => {
    const read = await readPicture(file);
    setRefused('sentence' in read ? read.sentence : '');
    if ('logo' in read) change({ logo: read.logo });
  };
  return (
    <>
      {typed.logo ? (
        <div className={style.row}>
          <img className={style.logo} src={`data:${typed.logo.type};base64,${typed.logo.base64}`} alt="On top of your papers" />
          <Button onPress={() => change({ logo: undefined })}>Remove the picture</Button>
        </div>
      ) : null}
      <FileField
        label={`${typed.logo ? 'Another picture' : 'A picture at the top of your papers'}, PNG or JPEG, at most 220 kB`}
        accept="image/png,image/jpeg"
        onChoose={(file) => void choose(file)}
      />
      {wrong ? (
        <p role="alert" className={style.wrong}>
          {wrong} {typed.logo ? 'The picture above stays.' : 'No picture was taken.'}
        </p>
      ) : null}
    </>
  );
}

function Accent({ typed, change, trouble }: SetupPart) {
  const [own, setOwn] = useState(!isInk(typed.accent));
  return (
    <div className={style.accent}>
      <Segments
        label="Colour of the rules on papers"
        value={own ? 'own' : typed.accent}
        options={[...inks, { value: 'own', label: 'my own' }]}
        onChange={(chosen) => {
          setOwn(chosen === 'own');
          if (chosen !== 'own') change({ accent: chosen });
        }}
      />
      {isColour(typed.accent) ? (
        <svg className={style.swatch} width="96" height="12" aria-hidden>
          <rect y="4" width="96" height="4" fill={typed.accent} />
        </svg>
      ) : null}
      {own ? (
        <Field
          label="My own colour"
          placeholder="#2f5877"
          value={typed.accent}
          onChange={(accent) => change({ accent })}
          error={fieldTrouble(trouble, 'accent')}
        />
      ) : null}
    </div>
  );
}
