import style from './setup.module.css';

/** What this program cannot decide; each also stands where its matter arises. */
export function Cautions() {
  return (
    <ul className={style.cautions}>
      <li>Tax, terms and forms are starting points, not legal or tax advice.</li>
      <li>Drives are estimated until you type them. After a long day or short rest, do not drive: no job is worth it.</li>
      <li>Whether you may work, or take kit, across a border is for the border agency and the client to say.</li>
      <li>Mains, lifts, lights and crowds: the venue's licensed people, the posted limit and the captain have the last word.</li>
      <li>Batteries by air: the operator decides; limits differ and change.</li>
      <li>Names, phones and messages here are personal data of other people. Whoever has this computer has them.</li>
    </ul>
  );
}
