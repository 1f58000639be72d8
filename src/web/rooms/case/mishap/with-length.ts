import type { FragmentOnFilm } from "../../../../ledger/fragments-on-films.ts";
import { type Mishap, starts } from "./with-kind.ts";

/** A length with its standard deviation, in mm. */
type Measured = NonNullable<NonNullable<Mishap["separated"]>["lengthMm"]>;

/** A length of the piece that the record has elsewhere. */
export interface LengthOffer {
  readonly measured: Measured;
  readonly says: string;
}

/** Where nothing says how unsure a length is: what a rule on a film is read to. */
const usualSigma = 0.2;

/** What can be taken for the piece's length by one press; a length that stands already is not offered. */
export function lengthOffers(
  mishap: Mishap,
  onFilms: readonly FragmentOnFilm[],
  dayInWords: (day: string) => string,
): readonly LengthOffer[] {
  const ofCanal = onFilms.filter(
    ({ canal }) => mishap.canal === undefined || canal === undefined || canal === mishap.canal,
  );
  const films = ofCanal.map(({ lengthMm, sigmaMm, takenOn }): LengthOffer => {
    const measured = { value: lengthMm, sigma: sigmaMm ?? usualSigma };
    return { measured, says: `${inWords(measured)} from the film of ${dayInWords(takenOn)}` };
  });
  const noted = mishap.fragmentMm === undefined ? [] : [{ value: mishap.fragmentMm, sigma: usualSigma }];
  const earlier = noted.map((measured): LengthOffer => ({ measured, says: `${inWords(measured)}, noted before` }));
  const stands = mishap.separated?.lengthMm;
  return [...films, ...(stands === undefined ? earlier : [])].filter(
    ({ measured }) => measured.value !== stands?.value || measured.sigma !== stands.sigma,
  );
}

const inWords = ({ value, sigma }: Measured): string => `${value} ± ${sigma}\u202fmm`;

/** The mishap with the length of its piece. */
export function withLength(mishap: Mishap, lengthMm: Measured): Mishap {
  const begun: NonNullable<Mishap["separated"]> = mishap.separated ?? { ...starts.separated, signs: [] };
  return { ...mishap, fragmentMm: lengthMm.value, separated: { ...begun, lengthMm } };
}
