import { useEffect, useState } from 'react';
import { TextArea, TextField } from 'react-aria-components';
import { readMessage } from '../../actions/read-message.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { useScenePart } from '../../scene.ts';
import style from './paste-box.module.css';

/** The box for an inquiry as it came. What is pasted anywhere else on the Desk lands here too. */
export function PasteBox({ onText }: { onText: (has: boolean) => void }) {
  const [text, setText] = useState('');
  useScenePart('message', text);
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
        <p className={style.second}>The words it understood are shown beside what it read. Ctrl+Enter reads it.</p>
        <ActionButton action={readMessage} kind={text.trim() === '' ? 'plain' : 'black'} />
      </div>
    </div>
  );
}
