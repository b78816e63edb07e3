import style from './file-field.module.css';

/** A file to choose from this computer. */
export function FileField({ label, accept, onChoose }: { label: string; accept: string; onChoose: (file: File) => void }) {
  return (
    <label className={style.choose}>
      <span className={style.label}>{label}</span>
      <input
        type="file"
        accept={accept}
        className={style.file}
        // Emptied first, so that the same file can be chosen again once it was corrected.
        onClick={(event) => {
          event.currentTarget.value = '';
        }}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          if (file) onChoose(file);
        }}
      />
    </label>
  );
}
