import { ratioFigure } from "../../../../../core/times-text.ts";
import { type Standing, standingWords } from "../../../../../figures/limit-marks.ts";
import { type Breathed, type BreathedBy, breathed, limitInWords } from "../../../../../ledger/solvent-in-words.ts";
import { quantityInWords } from "../../../../parts/figures-in-words.ts";
import { capital } from "../../../../words/capital.ts";

interface WhoBreathesOptions {
  readonly by: BreathedBy;
  readonly entryId: string;
  readonly patientEntryId: string | undefined;
}

/** Dentist, assistant and patient: which air each breathes, how much of it, and the limit that it comes closest to. */
export const WhoBreathes = ({ by, entryId, patientEntryId = entryId }: WhoBreathesOptions) => (
  <div className="air-scroll">
    <table className="ruled-table air-table">
      <caption>Who breathes what. The limits are set for people at work; none is set for a patient.</caption>
      <thead>
        <tr>
          <th scope="col">Who</th>
          <th scope="col">Air</th>
          <th scope="col" data-figure>
            Highest
          </th>
          <th scope="col" data-figure>
            15 min
          </th>
          <th scope="col" data-figure>
            60 min
          </th>
          <th scope="col" data-figure>
            8 hours
          </th>
          <th scope="col">Closest limit</th>
        </tr>
      </thead>
      <tbody>
        {breathed(by).map((one) => (
          <OnePerson key={one.who} one={one} entryId={one.who === "patient" ? patientEntryId : entryId} />
        ))}
      </tbody>
    </table>
  </div>
);

const OnePerson = ({ one, entryId }: { readonly one: Breathed; readonly entryId: string }) => (
  <tr>
    <th scope="row">{capital(one.who)}</th>
    <td>{one.where}</td>
    <td data-figure>
      <a className="air-number" href={`#${entryId}`}>
        {quantityInWords(one.peak.ppm, "ppm")}
      </a>
      <Range within={one.peak.within} />
    </td>
    {one.means.map(({ averagingMin, mean }) => (
      <td key={averagingMin} data-figure>
        <a className="air-number" href={`#${entryId}`}>
          {quantityInWords(mean.ppm, "ppm")}
        </a>
        <Range within={mean.within} />
      </td>
    ))}
    <td>
      {one.nearest === undefined
        ? "no limit was read"
        : `${standingSigns[one.nearest.stands]} ${ratioFigure(one.nearest.ratio)} of ${limitInWords(one.nearest)}; ${standingWords[one.nearest.stands]}`}
    </td>
  </tr>
);

/** The shapes of the drawing, as signs. */
const standingSigns: Readonly<Record<Standing, string>> = { below: "○", at: "◆", above: "◆", dependsOnRate: "◧" };

const Range = ({ within }: { readonly within: Breathed["peak"]["within"] }) =>
  within === undefined || ratioFigure(within.low.ppm) === ratioFigure(within.high.ppm) ? null : (
    <span className="air-range">
      {ratioFigure(within.low.ppm)} to {ratioFigure(within.high.ppm)}
    </span>
  );
