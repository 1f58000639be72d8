import { useId } from "react";
import { Link } from "wouter";
import { type AnaestheticTold, anaestheticTold } from "../../../../../ledger/anaesthetic-told.ts";
import { stopsUnasked } from "../../../../../ledger/stops-unasked.ts";
import { vasoconstrictorWords } from "../../../../../record/words/visit-words.ts";
import { Cautions } from "../../../../parts/cautions.tsx";
import { NumberField } from "../../../../parts/fields/number-field.tsx";
import { refusalInWords, sentenceInWords } from "../../../../words/value-words.ts";
import { useCaseNow } from "../../case-now.ts";
import { agentInWords, fractionInWords, quantity, vasoconstrictorInWords } from "./dose-in-words.ts";
import { NextSolution } from "./next-solution.tsx";
import { QuestionsOpen } from "./questions-open.tsx";
import { sourcesInWords } from "./sources-in-words.ts";
import { useVisit, type Visit } from "./use-visit.ts";

/** How much anaesthetic was given against whose limits, and what is left. */
export function AnaestheticSection() {
  const { visitId, visit, readOnly } = useVisit("Anaesthetic");
  const { ledger } = useCaseNow();
  const told = anaestheticTold(ledger, visitId);
  if (told === undefined)
    return readOnly ? null : (
      <>
        <p className="quiet">No anaesthetic is noted. What is left is told as soon as a solution is chosen.</p>
        <NextSolution told={undefined} entryId={undefined} />
      </>
    );
  if (told.output === undefined)
    return (
      <div className="sum-none">
        <p className="look">▲ The limits are not looked at. {refusalInWords(told.why)}</p>
        {!readOnly && (
          <div className="fields">
            <NumberField at="vitalSigns.bodyMassKg" label="Body mass" unit="kg" />
            <NumberField at="vitalSigns.ageYears" label="Age, where it is known" unit="years" />
          </div>
        )}
        {!readOnly && <NextSolution told={undefined} entryId={told.entryId} />}
      </div>
    );
  const { output, entryId } = told;
  return (
    <div className="sum-told">
      <Stops {...output} given={visit.anaesthetic} />
      <GivenSoFar told={output} entryId={entryId} />
      <NextSolution told={output.planned} entryId={entryId} />
      <Settings {...output} />
      <QuestionsOpen {...{ readOnly }} questions={output.questions} on={visit.on} />
      <Cautions
        topic="anaesthetic"
        cautions={output.cautions.filter((one) => !output.stops.some(({ says }) => says === one))}
      />
      {output.notComputed.map(({ name, why }) => (
        <p key={name} className="quiet">
          Not computed: {sentenceInWords(why)}
        </p>
      ))}
      <p>
        <Link href="/methods/anaesthetic">How this is computed</Link>
      </p>
    </div>
  );
}

interface StopsOptions extends Pick<AnaestheticTold, "stops"> {
  readonly given: Visit["anaesthetic"];
}

/** What is above a limit; where nobody was asked about it as it stands now, that is said too. */
function Stops({ stops, given }: StopsOptions) {
  const unasked = stopsUnasked(stops, given);
  if (stops.length === 0) return null;
  return (
    <ul className="sum-stops">
      {stops.map((stop) => (
        <li key={stop.says}>
          ▲ {stop.says}
          {stop.mark === "memory" && <span className="quiet"> From memory.</span>}
          {unasked.includes(stop) && (
            <strong>
              {" "}
              Nobody was asked about this as it stands: something was changed after the injection was noted.
            </strong>
          )}
        </li>
      ))}
    </ul>
  );
}

/** Each agent and each vasoconstrictor against its limit; the bar ends where the limit is. */
function GivenSoFar({ told, entryId }: { readonly told: AnaestheticTold; readonly entryId: string }) {
  const heading = useId();
  return (
    <section aria-labelledby={heading}>
      <h3 id={heading}>Given so far</h3>
      <dl className="sum-bars">
        {told.agents.map((row) => (
          <div key={row.agent}>
            <dt>{row.agent}</dt>
            <dd>
              <Bar share={row.fraction} name={row.agent} />
              <a className="sum-number" href={`#${entryId}`}>
                {agentInWords(row)}
              </a>
              <span className="quiet">
                {row.limitRule}; {sourcesInWords(row.source, row.mark)}.{othersInWords(row.otherSets)}
              </span>
            </dd>
          </div>
        ))}
        {told.agents.length > 1 && (
          <div>
            <dt>together</dt>
            <dd>
              <Bar share={told.fractionSum} name="All agents together" />
              <a className="sum-number" href={`#${entryId}`}>
                {fractionInWords(told.fractionSum)}
              </a>
            </dd>
          </div>
        )}
        {told.vasoconstrictors.map((row) => (
          <div key={row.name}>
            <dt>{vasoconstrictorWords[row.name]}</dt>
            <dd>
              {row.fraction !== undefined && <Bar share={row.fraction} name={row.name} />}
              <a className="sum-number" href={`#${entryId}`}>
                {vasoconstrictorInWords(row)}
              </a>
              {row.source !== undefined && (
                <span className="quiet">{sourcesInWords(row.source, row.mark ?? "seen")}</span>
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

/** A share of a limit; above it the bar is full, hatched and says so. */
const Bar = ({ share, name }: { readonly share: number; readonly name: string }) => (
  <meter
    className="sum-bar"
    min={0}
    max={1}
    value={share}
    data-over={share > 1}
    aria-label={`${name} against its limit`}
  />
);

const setWords: Readonly<Record<AnaestheticTold["agents"][number]["otherSets"][number]["set"], string>> = {
  unitedStatesLabel: "United States' label",
  canada: "Canada",
  australia: "Australia",
  conservative: "the lowest of all",
};

const othersInWords = (sets: AnaestheticTold["agents"][number]["otherSets"]): string =>
  sets.length === 0
    ? ""
    : ` Other sets: ${sets.map(({ set, limitMg }) => `${setWords[set]} ${quantity(limitMg, "mg")}`).join(", ")}.`;

/** What the sum rests on that changes limits: whose they are, the mass, the age, the heart. */
const Settings = ({ limitSet, dosingMass, basis }: AnaestheticTold) => (
  <dl className="sum-rests">
    <div>
      <dt>Whose limits</dt>
      <dd>{sentenceInWords(limitSet.says)}</dd>
    </div>
    <div>
      <dt>Mass</dt>
      <dd>
        {dosingMass.kg} kg, {dosingMass.says}
      </dd>
    </div>
    <div>
      <dt>Rests on</dt>
      <dd>{basis.assumptions.filter((one) => !/^(Limits|Mass): /.test(one)).join(" ")}</dd>
    </div>
  </dl>
);
