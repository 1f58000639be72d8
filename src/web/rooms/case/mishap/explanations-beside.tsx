import { endsText, percentText } from "../../../../figures/chance-text.ts";
import type { ExplanationTold, FractureTold } from "../../../../ledger/fracture-told.ts";
import { withBareSourceNames } from "../../../../pages/source-name.ts";
import { explanationWords } from "../../../../record/words/mishap-words.ts";
import { numberInWords } from "../../../parts/figures-in-words.ts";
import { capital } from "../../../words/capital.ts";
import { sentenceInWords } from "../../../words/value-words.ts";

/** What the parts of an explanation need: what the ledger says, and the entry to which each number leads. */
export interface ToldOfBreak {
  readonly told: FractureTold;
  readonly entryId: string;
}

/** The three explanations side by side: place, likelihood, prior and posterior. */
export const ExplanationsBeside = ({ told, entryId }: ToldOfBreak) => (
  <div className="mishap-scroll">
    <table className="ruled-table mishap-table" data-wide>
      <caption>Each explanation before and after what was seen</caption>
      <thead>
        <tr>
          <td />
          {told.explanations.map(({ name }) => (
            <th key={name} scope="col">
              {capital(explanationWords[name])}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Row name="After all that was seen" of={told} strong>
          {({ posterior: { mean, interval } }) => (
            <>
              <a className="mishap-number" href={`#${entryId}`}>
                {percentText(mean)} %
              </a>{" "}
              <span className="quiet">{endsText(interval)}</span>
            </>
          )}
        </Row>
        <Row name="Before" of={told}>
          {(one) => <Prior of={one} />}
        </Row>
        <Row name="Was to be expected at" of={told}>
          {(one) => <Place of={one} />}
        </Row>
        <Row name="Likelihood of what was seen" of={told}>
          {({ likelihood }) => <>{numberInWords(likelihood, 2)}</>}
        </Row>
      </tbody>
    </table>
  </div>
);

interface RowOptions {
  readonly name: string;
  readonly of: FractureTold;
  readonly strong?: boolean;
  readonly children: (one: ExplanationTold) => React.ReactNode;
}

const Row = ({ name, of, strong = false, children }: RowOptions) => (
  <tr data-strong={strong}>
    <th scope="row">{name}</th>
    {of.explanations.map((one) => (
      <td key={one.name}>{children(one)}</td>
    ))}
  </tr>
);

function Prior({ of: { prior } }: { readonly of: ExplanationTold }) {
  const { mean, n, N, source } = prior;
  return (
    <>
      {percentText(mean)} %{" "}
      <span className="quiet">
        {n !== undefined && N !== undefined && `${n}/${N}: `}
        {sentenceInWords(withBareSourceNames(source))}
      </span>
    </>
  );
}

/** Where in the canal the mean would lie, by where the course begins. */
function inCanal({ fromOrificeMm, fromReferenceMm }: ExplanationTold): string {
  if (fromOrificeMm !== undefined) return `, ${numberInWords(fromOrificeMm, 1)}\u202fmm below the orifice`;
  return fromReferenceMm === undefined
    ? ""
    : `, ${numberInWords(fromReferenceMm, 1)}\u202fmm below the reference point`;
}

function Place({ of }: { readonly of: ExplanationTold }) {
  const { predictedFromTipMm: at } = of;
  if (at === null) return <span className="quiet">anywhere</span>;
  return (
    <>
      {numberInWords(at.mean, 1)}&#x202f;mm from the tip{" "}
      <span className="quiet">
        SD {numberInWords(at.sd, 1)}&#x202f;mm
        {inCanal(of)}
      </span>
    </>
  );
}
