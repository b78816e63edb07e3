import { useQuery } from '@tanstack/react-query';
import { loadSample } from '../../actions/load-sample.ts';
import { ask } from '../../ask.ts';
import { useDeeds } from '../../deeds.ts';
import { ActionButton } from '../../parts/action-button.tsx';
import { useScenePart } from '../../scene.ts';
import style from './welcome.module.css';

/** How often it is asked how far a load is, milliseconds. */
const LOOK_EVERY = 500;

/** On an empty store: look around in the sample year first. */
export function SampleOffer() {
  const { running } = useDeeds();
  const { data } = useQuery(ask.sample.state.queryOptions({ input: {}, refetchInterval: running > 0 ? LOOK_EVERY : false }));
  useScenePart('sample', data);
  if (!data?.empty) return null;
  const { loading } = data;
  return (
    <section className={style.sample} aria-labelledby="sample">
      <h2 id="sample">Or look around first</h2>
      <p className={style.second}>
        The sample year is fourteen months of a videographer in Duluth, Minnesota, told for today. Everybody in it is invented. It goes into
        this empty store and can be left again.
      </p>
      {loading ? (
        <p role="status">
          Loading the sample year: {loading.done} of {loading.total} steps.
        </p>
      ) : (
        <p>
          <ActionButton action={loadSample} />
        </p>
      )}
    </section>
  );
}
