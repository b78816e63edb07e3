import { useState } from 'react';
import { LARGEST_FILE } from '../../core/contract/parts.ts';
import { fileType, TOO_LARGE, WRONG_TYPE } from '../../core/papers/file-type.ts';
import { FileField } from './file-field.tsx';
import style from './dropped-file.module.css';

/** A file that was given and looked at: a PDF or a picture of at most 8 MB. */
export type GivenFile = { name: string; base64: () => Promise<string> };
const TAKEN = 'application/pdf,image/jpeg,image/png,image/webp,image/heic,.pdf,.jpg,.jpeg,.png,.webp,.heic';

/** Somewhere to drop a PDF or a picture, or to choose one. What is too large or of another kind is refused before it is read. */
export function DroppedFile({
  label,
  given,
  onGive,
}: {
  label: string;
  given: GivenFile | null;
  onGive: (file: GivenFile | null) => void;
}) {
  const [trouble, setTrouble] = useState('');
  const [over, setOver] = useState(false);
  const take = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const wrong = await wrongWith(file);
    setTrouble(wrong === '' ? '' : `${file.name} ${wrong}.`);
    onGive(wrong === '' ? { name: file.name, base64: async () => new Uint8Array(await file.arrayBuffer()).toBase64() } : null);
  };
  return (
    <div
      role="group"
      aria-label={label}
      className={style.drop}
      data-over={over}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void take(event.dataTransfer.files[0]);
      }}
    >
      <FileField label={`${label}: drop it here, or choose it`} accept={TAKEN} onChoose={(file) => void take(file)} />
      <p role="status" className={style.said}>
        {given ? `${given.name} is ready.` : trouble === '' ? 'A PDF or a picture, up to 8 MB.' : ''}
      </p>
      {trouble === '' ? null : (
        <p role="alert" className={style.trouble}>
          {trouble}
        </p>
      )}
    </div>
  );
}

/** Why a file is not taken, by its size and its first bytes; empty where it is. */
async function wrongWith(file: File): Promise<string> {
  if (file.size > LARGEST_FILE) return TOO_LARGE;
  return fileType(new Uint8Array(await file.slice(0, 16).arrayBuffer())) ? '' : WRONG_TYPE;
}
