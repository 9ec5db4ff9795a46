import { type RunByVolume, say, told, volumeCutWords } from '#shared-core';
import { useWords } from '../words/index.ts';

/** The cuts by the temperature, and what is in all of them together. */
export function VolumeTable({ byVolume }: { readonly byVolume: RunByVolume }) {
  const words = useWords();
  const last = byVolume.course.findLast(({ collectedAbv }) => collectedAbv !== null);
  const parts = byVolume.verdict.cuts.map(({ cut, fromMl, toMl, meanAbv }) => ({
    name: told(volumeCutWords[cut]),
    fromMl,
    toMl,
    abv: meanAbv,
  }));
  if (last?.collectedAbv != null) {
    parts.push({
      name: say('All together'),
      fromMl: 0,
      toMl: last.volumeMl,
      abv: last.collectedAbv,
    });
  }
  if (parts.length === 0) return null;
  return (
    <table className="numbers volume-cuts">
      <caption>{say('Cuts by the temperature')}</caption>
      <thead>
        <tr>
          <th scope="col">{say('Part')}</th>
          <th scope="col">{say('From')}</th>
          <th scope="col">{say('To')}</th>
          <th scope="col">{say('Mean strength at 20 °C')}</th>
        </tr>
      </thead>
      <tbody>
        {parts.map(({ name, fromMl, toMl, abv }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number">{words.quantity(fromMl, 1, 'mL')}</td>
            <td className="number">{words.quantity(toMl, 1, 'mL')}</td>
            <td className="number">
              {words.number(abv.low, 0)}–{words.quantity(abv.high, 0, '% vol')}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
