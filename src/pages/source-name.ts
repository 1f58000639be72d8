/** Bodies that are written by their letters. */
const bodies: Readonly<Record<string, string>> = {
  ...{ Aae: "AAE", Ese: "ESE", Iso: "ISO" },
  ...{ Epa: "EPA", Iris: "IRIS", Niosh: "NIOSH", Idlh: "IDLH", Osha: "OSHA", Ec: "EC", Eu: "EU" },
};

/**
 * `Ng Gulabivala 2011` from the id of a published source, `ESE 2019, deep caries` where it is one of several of a year;
 * words that name no source stay as they are.
 */
export function sourceName(id: string): string {
  if (!/\d/.test(id)) return id;
  const [, people = id, rest = ""] = /^(.*-(?:19|20)\d{2})-([a-z-]+)$/.exec(id) ?? [];
  const named = people
    .split("-")
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .map((word) => bodies[word] ?? word)
    .join(" ");
  return rest === "" ? named : `${named}, ${rest.replaceAll("-", " ")}`;
}

/** The name of a value's source, with a star where the value was recalled. */
export const sourceWithStar = ({ source, mark }: { readonly source: string; readonly mark: string }): string =>
  `${sourceName(source)}${mark === "memory" ? "*" : ""}`;

/** A sentence of a computation in which brackets begin with a source by its id, with its name instead. */
export const withSourceNames = (sentence: string): string =>
  sentence.replaceAll(
    /\(([a-z]+(?:-[a-z]+)*-(?:19|20)\d{2}(?:-[a-z]+)*)(?=[);:,])/g,
    (_, id: string) => `(${sourceName(id)}`,
  );

/** A sentence in which sources stand by their bare id, as `wu-2011 for torsion`, with their names instead. */
export const withBareSourceNames = (sentence: string): string =>
  sentence.replaceAll(/\b[a-z]+(?:-[a-z]+)*-(?:19|20)\d{2}\b/g, sourceName);
