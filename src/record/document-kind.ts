/** What can be made of a case: pages for the projector, sheets for who reads it, sheets for the patient. */
export const documentKinds = ["deck", "handout", "consent", "piece", "letter"] as const;
/** One of {@link documentKinds}. */
export type DocumentKind = (typeof documentKinds)[number];
