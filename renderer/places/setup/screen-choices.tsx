import { look, singleKeys, useChoice } from '../../look/choices.ts';
import { Segments } from '../../parts/segments.tsx';
import { Tick } from '../../parts/tick.tsx';

/** How this screen looks and listens; kept by this window, not by the store. */
export function ScreenChoices() {
  const chosen = useChoice(look);
  const keys = useChoice(singleKeys);
  return (
    <>
      <Segments
        label="Light or dark"
        value={chosen}
        options={[
          { value: 'system', label: 'as the computer' },
          { value: 'light', label: 'light' },
          { value: 'dark', label: 'dark' },
        ]}
        onChange={look.set}
      />
      <Tick checked={keys === 'on'} onChange={(on) => singleKeys.set(on ? 'on' : 'off')}>
        Single keys work: / goes to the find box, + and - zoom the road
      </Tick>
    </>
  );
}
