import { solventsOf } from "../../../../../ledger/solvent-named.ts";
import { OtherCases } from "./other-cases.tsx";
import { OwnSolvent } from "./own-solvent.tsx";
import { PassedForamen } from "./passed-foramen.tsx";
import { RoomOfVisit } from "./room-of-visit.tsx";
import { SolventInAir } from "./solvent-in-air.tsx";
import { useVisitInAir } from "./use-visit-in-air.ts";
import "../../../../parts/ruled-table.css";
import "./air-section.css";

/** The solvents of a visit in the air that is breathed, and past the foramen; what is asked for is asked here. */
export function AirSection() {
  const { id, revision, visit } = useVisitInAir();
  if (visit === undefined) return null;
  const names = solventsOf(visit);
  const wanting = visit.solvent.flatMap((dose, row) =>
    dose.solvent === "other" && dose.own === undefined ? [row] : [],
  );
  // What is asked for above is not said to be missing again.
  const reckoned =
    visit.clinic?.room === undefined ? [] : names.filter((name) => wanting.length === 0 || name !== "other");
  if (names.length === 0)
    return (
      <section className="form-part" aria-labelledby="air-title">
        <h2 id="air-title">Solvent in the air</h2>
        <p className="quiet">
          No solvent is noted. With the first dose stands here what it makes of the air that is breathed.
        </p>
      </section>
    );
  return (
    <>
      <section className="form-part air" aria-labelledby="air-title">
        <h2 id="air-title">Solvent in the air</h2>
        <RoomOfVisit />
        {wanting.length > 0 && <OwnSolvent rows={wanting} />}
        {reckoned.map((name) => (
          <SolventInAir key={name} {...{ id, revision, visit, name }} named={names.length > 1 ? name : undefined} />
        ))}
        <OtherCases />
      </section>
      <PassedForamen visitId={id} />
    </>
  );
}
