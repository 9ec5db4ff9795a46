import {
  bookTables,
  fermentSentence,
  fromFermentFigure,
  inDecimals,
  type RunStudy,
  say,
  told,
} from '#shared-core';
import { DrawnFigure, ToldTable } from '../figures/index.ts';
import { usePreferences } from '../parts/index.ts';

/** What the books say, in the words of the report. */
export function BooksTables({ books }: { readonly books: RunStudy['books'] }) {
  const decimal = usePreferences((preferences) => preferences.decimal);
  const own = (text: string) => inDecimals(told(text), decimal);
  const tables = bookTables(books);
  const fromSugar = fromFermentFigure(books.fromFerment);
  return (
    <>
      {tables.length === 0 && (
        <p className="soft">{say('Nothing is measured yet that could be balanced.')}</p>
      )}
      {tables.map((table) => (
        <ToldTable key={table.caption} table={table} />
      ))}
      {books.balance !== null && books.residue === null && (
        <p>
          {say(
            'Without a measured residue there is no closure: taking it from the difference would make every balance close.',
          )}
        </p>
      )}
      {books.ferment !== null && (
        <p>{own(fermentSentence(books.ferment, books.unmeasuredCuts.length === 0))}</p>
      )}
      {fromSugar !== null && (
        <DrawnFigure
          drawing={fromSugar}
          caption={say('From sugar to distillate. Whiskers hold nineteen times in twenty.')}
        />
      )}
      {books.assumptions.length > 0 && (
        <details className="why">
          <summary>{say('Taken for granted, and left out')}</summary>
          <ul>
            {books.assumptions.map((assumption) => (
              <li key={assumption}>{own(assumption)}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
