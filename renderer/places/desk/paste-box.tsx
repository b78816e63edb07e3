import { useEffect, useMemo, useState } from 'react';
import { TextArea, TextField } from 'react-aria-components';
import { readMessage } from '../../actions/read-message.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { useScenePart } from '../../scene.ts';
import style from './paste-box.module.css';

/** The box for an inquiry as it came. What is pasted anywhere else on the Desk lands here too. */
export function PasteBox({ onText }: { onText: (has: boolean) => void }) {
  const [text, setText] = useState('');
  const [nothing, setNothing] = useState<string | null>(null);
  const asksNothing = useMemo(() => ({ is: nothing === text, say: () => setNothing(text) }), [nothing, text]);
  useScenePart('message', text);
  useScenePart('asksNothing', asksNothing);
  useEffect(() => onText(text.trim() !== ''), [text, onText]);
  useEffect(() => {
    const onPaste = (event: ClipboardEvent): void => {
      if (event.target instanceof Element && event.target.closest('input, textarea')) return;
      const pasted = event.clipboardData?.getData('text/plain') ?? '';
      if (pasted.trim() !== '') setText(pasted);
    };
    document.addEventListener('paste', onPaste);
    return () => document.removeEventListener('paste', onPaste);
  }, []);
  return (
    <div className={style.box}>
      <TextField aria-label="Inquiry as it came" value={text} onChange={setText}>
        <TextArea
          className={style.text ?? ''}
          placeholder="Paste an inquiry as it came: mail, chat, a voicemail you typed down."
          rows={1}
        />
      </TextField>
      <div className={style.row}>
        {asksNothing.is ? (
          <p role="status" className={style.nothing}>
            Nobody asks for work of yours in this: news, thanks, a reminder, an automatic answer, or of another trade. Nothing was put on
            the books.
          </p>
        ) : (
          <p className={style.second}>The words it understood are shown beside what it read. Ctrl+Enter reads it.</p>
        )}
        <ActionButton action={readMessage} kind={text.trim() === '' || asksNothing.is ? 'plain' : 'black'} />
      </div>
    </div>
  );
}
