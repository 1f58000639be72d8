/** The dashes of a case's films in their order, in every drawing that tells films apart. */
export const filmDashes = ["5 4", "1.5 3.5", "9 3 2 3"] as const;
