const weekday =
  /^(?:mon|tue|wed|thu|fri|sat|sun|mo|di|mi|do|fr|sa|so|lun|mar|mer|jeu|ven|sam|dim)\p{L}{0,7}\.?,?\s+/iu;
/** As the C library writes a moment: the year behind the time. */
const yearLast = /^(\p{L}{3})\s+(\d{1,2})\s+(\d{1,2}:\d{2}:\d{2})\s+(\d{4})$/u;
/** ISO 8601 in its basic form, without separators. */
const basicForm =
  /^(\d{4})(\d{2})(\d{2})T(\d{2})(\d{2})(\d{2}(?:[.,]\d+)?)?(Z|[+-]\d{2}:?\d{2})?$/i;
/** A zone by its letters; of those only universal time is the same everywhere. */
const zoneLetters = /(:\d{2}(?:[.,]\d+)?(?:\s*[ap]m)?)\s*(?:(UTC|GMT)|(?<=\s)[A-Z]{3,4})$/;
const hoursAndMinutes = /^(\d{1,2})\s?h\s?([0-5]\d)$/i;

/**
 * A moment in the spelling that most loggers use, from one that some use: without its weekday, with its year before the time, with
 * separators, with a zone in digits. A zone in other letters is left out: it is the calendar of the logger's place.
 */
export function usualSpelling(text: string): string {
  const basic = basicForm.exec(text);
  if (basic !== null) {
    const [, year, month, day, hour, minute, second = '00', zone = ''] = basic;
    return `${year}-${month}-${day}T${hour}:${minute}:${second}${zone}`;
  }
  return text
    .replace(hoursAndMinutes, '$1:$2:00')
    .replace(weekday, '')
    .replace(yearLast, '$1 $2 $4 $3')
    .replace(zoneLetters, (_, time: string, universal?: string) =>
      universal === undefined ? time : `${time}Z`,
    );
}
