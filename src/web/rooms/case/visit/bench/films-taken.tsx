import { Link } from "wouter";
import { type Part, partsOf } from "../../../../../record/parts.ts";
import { purposeWords } from "../../../../../record/words/later-words.ts";
import { useCaseNow } from "../../case-now.ts";
import type { Visit } from "../materials/use-visit.ts";
import { useBench } from "./use-bench.ts";

/** The films of that day, each ticked where this visit took it; each opens in the light box. */
export function FilmsTaken() {
  const { visit, record, readOnly } = useBench("Films taken");
  const { parts, caseId } = useCaseNow();
  const films = filmsOf(parts, visit);
  const toggle = (id: string, says: string) => {
    const isTaken = visit.films.includes(id);
    const next = isTaken ? visit.films.filter((one) => one !== id) : [...visit.films, id];
    record({ ...visit, films: next }, isTaken ? `${says} taken out` : says);
  };
  return (
    <section className="form-part" id="visit-films">
      <h2>Films taken</h2>
      {films.length === 0 ? (
        <p className="quiet">
          No film of this day is in the case.{" "}
          <Link href={`/case/${caseId}/light-box`}>Take one in at the light box</Link>
        </p>
      ) : (
        <ul className="bench-films">
          {films.map(({ id, body }) => {
            const says = body.caption || purposeWords[body.purpose];
            return (
              <li key={id}>
                <label className="field-tick bench-film">
                  <input
                    type="checkbox"
                    checked={visit.films.includes(id)}
                    disabled={readOnly}
                    onChange={() => toggle(id, says)}
                  />
                  <span>{says}</span>
                </label>
                <Link
                  href={`/case/${caseId}/light-box/${id}`}
                  className="button"
                  aria-label={`On the light box: ${says}`}
                >
                  On the light box
                </Link>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}

const filmsOf = (parts: readonly Part[], { on, films }: Pick<Visit, "on" | "films">) =>
  partsOf(parts, "film").filter(({ id, body }) => body.takenOn === on || films.includes(id));
