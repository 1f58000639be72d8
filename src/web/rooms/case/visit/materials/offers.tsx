import { useId } from "react";
import { KeyHint } from "../../../../parts/key-hint.tsx";

/** Something that can be chosen with one press. */
export interface Offer {
  readonly id: string;
  readonly name: string;
  /** What it holds, or what is left of it. */
  readonly says: string;
  /** What speaks against it, said loudly: expired, nothing left. */
  readonly look?: string | undefined;
}

/** What stands for a thing that is not among the clinic's own. */
export const anotherOne = "another";

interface OffersOptions {
  readonly label: string;
  readonly offers: readonly Offer[];
  readonly chosen: string | undefined;
  /** By pointer or by its digit the choice is made, and the amount comes next; by arrow keys it goes on. */
  readonly choose: (id: string, goesOn: boolean) => void;
}

/** What the clinic has, as large targets with a digit each; and another one, whose fields begin empty. */
export function Offers({ label, offers, chosen, choose }: OffersOptions) {
  const name = useId();
  const all: readonly Offer[] = [...offers, { id: anotherOne, name: "another one", says: "written by hand" }];
  return (
    <fieldset className="entry-choice">
      <legend className="field-label">{label}</legend>
      <div className="entry-targets offers">
        {all.map(({ id, name: called, says, look }, place) => (
          <label key={id} className="entry-target offer">
            <input
              type="radio"
              name={name}
              checked={chosen === id}
              onChange={() => choose(id, false)}
              onClick={({ detail }) => detail > 0 && choose(id, true)}
            />
            <span>
              <strong>{called}</strong>
              {says !== "" && <span className="quiet">{says}</span>}
              {look !== undefined && <span className="offer-look">▲ {look}</span>}
              {digitOf(id, place) !== undefined && <KeyHint keys={digitOf(id, place) ?? ""} />}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

const digitOf = (id: string, place: number): string | undefined =>
  id === anotherOne ? "0" : place < 9 ? String(place + 1) : undefined;

/** What a digit chooses: the offer at its place, or with 0 another one. */
export function offerOfDigit(key: string, offers: readonly Pick<Offer, "id">[]): string | undefined {
  if (key === "0") return anotherOne;
  return /^[1-9]$/.test(key) ? offers[Number(key) - 1]?.id : undefined;
}
