/** How sure is sure: the same for all rules, chosen here; where another bound stands beside a rule, it says why. */

/** More likely than not: from here on waiting costs more than acting. */
export const even = 0.5;
/** So sure something is called that costs something to take back. */
export const sure = 0.9;
/** Further off than so many standard deviations, chance and stated doubts explain nothing that is told or acted on. */
export const unlikelySds = 3;
