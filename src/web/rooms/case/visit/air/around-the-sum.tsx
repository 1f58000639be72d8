import type { SolventTold } from "../../../../../ledger/solvent-told.ts";
import { solventSourceName } from "../../../../../pages/solvent-figures.ts";
import { Cautions } from "../../../../parts/cautions.tsx";
import { quantityInWords } from "../../../../parts/figures-in-words.ts";
import { SeenMark } from "../../../../parts/seen-mark.tsx";
import { sentenceInWords } from "../../../../words/value-words.ts";

type Said = SolventTold["carcinogen"][number];

/** What a reader must know beside the numbers: classes, practice with what speaks against it, where all of it went, cautions. */
export const AroundTheSum = ({ told }: { readonly told: SolventTold }) => (
  <>
    {told.carcinogen.length > 0 && (
      <ul className="air-points" aria-label="How it is classed">
        {told.carcinogen.map((one) => (
          <li key={one.says}>
            <SaidBy one={one} />
          </li>
        ))}
      </ul>
    )}
    <Cautions
      topic="solvent"
      cautions={told.cautions.filter((one) => told.carcinogen.every(({ says }) => says !== one))}
    />
    <details className="air-more">
      <summary>What to know at the chair ({told.practicePoints.length})</summary>
      <ul className="air-points">
        {told.practicePoints.map(({ says, conflicting, evidence }) => (
          <li key={says}>
            {says}
            {conflicting && <span className="look"> ◆ the published results disagree</span>}
            <ul>
              {evidence.map((one) => (
                <li key={one.source + one.says}>
                  <SaidBy one={one} />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </details>
    <details className="air-more">
      <summary>Where all of it went</summary>
      <MassBalance told={told} />
    </details>
    <details className="air-more">
      <summary>What was assumed ({told.basis.assumptions.length})</summary>
      <ul className="air-points">
        {told.basis.assumptions.map((one) => (
          <li key={one}>{sentenceInWords(one)}</li>
        ))}
      </ul>
    </details>
  </>
);

/** A sentence with its source and whether that was read. */
export const SaidBy = ({ one: { says, source, mark } }: { readonly one: Said }) => (
  <>
    {says}{" "}
    <span className="quiet">
      {mark === "common practice" ? (
        "common practice"
      ) : (
        <>
          {solventSourceName(source)} <SeenMark verification={mark} />
        </>
      )}
    </span>
  </>
);

function MassBalance({ told: { massBalance, saturationMgM3 } }: { readonly told: SolventTold }) {
  const { atMin, dispensedMg, ventilatedMg, inAirMg, recoveredMg, notEvaporatedMg } = massBalance;
  const lines = [
    ["Dispensed", dispensedMg],
    ["Left with the air", ventilatedMg],
    ["Still in the air", inAirMg],
    ["Taken by suction", recoveredMg],
    ["Not evaporated", notEvaporatedMg],
  ] as const;
  return (
    <>
      <dl className="air-balance">
        {lines.map(([name, mg]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{quantityInWords(mg, "mg")}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet">
        At minute {quantityInWords(atMin, "")}. The most that the air can hold:{" "}
        {quantityInWords(saturationMgM3, "mg/m³")}.
      </p>
    </>
  );
}
