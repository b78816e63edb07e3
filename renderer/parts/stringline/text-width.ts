/** How wide words stand in the drawing, measured with its own font and remembered. */
const widths = new Map<string, number>();
const letterer = new Intl.Segmenter('en');
let pen: CanvasRenderingContext2D | null | undefined;

/** Pixels of words at 12.5 px. */
export function textWidth(text: string, weight: 400 | 600 = 400): number {
  const key = `${weight} ${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  pen ??= document.createElement('canvas').getContext('2d');
  if (!pen) return text.length * 7;
  pen.font = `${weight} 12.5px 'IBM Plex Sans', 'Noto Sans', sans-serif`;
  const width = pen.measureText(text).width;
  // Until the font is there another one is measured, which must not be remembered.
  if (document.fonts.status === 'loaded') widths.set(key, width);
  return width;
}

/** Words cut to a width with an ellipsis; nothing where not even three letters have room. */
export function fitted(text: string, room: number, weight: 400 | 600 = 400): string {
  if (textWidth(text, weight) <= room) return text;
  const letters = Array.from(letterer.segment(text), ({ segment }) => segment);
  let [low, high] = [0, letters.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (textWidth(`${letters.slice(0, middle).join('').trimEnd()}…`, weight) <= room) low = middle;
    else high = middle - 1;
  }
  return low < 3 ? '' : `${letters.slice(0, low).join('').trimEnd()}…`;
}
