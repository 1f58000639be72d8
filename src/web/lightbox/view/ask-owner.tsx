import { useEffect, useId, useRef, useState } from "react";
import { Button } from "../../parts/button.tsx";
import { isCanalName, namesToOffer } from "../kernels/canal-names.ts";
import { boundTo } from "../kernels/film-gestures.ts";
import { ownerQuestion, type SaidOfMark, saidOfMark } from "../kernels/owner-question.ts";
import type { Asking, LightBox } from "./light-box.ts";
import { useFilmAfterwards } from "./use-film-afterwards.ts";

interface AskOwnerOptions {
  readonly box: LightBox;
  readonly asking: Extract<Asking, { what: "owner" }>;
  /** Canals, or roots where a root is asked for. */
  readonly names: readonly string[];
}

/** Which canal or root a drawn mark belongs to, and the one other thing that only the person can say of it. */
export function AskOwner({ box, asking, names }: AskOwnerOptions) {
  const { body } = asking;
  const [typed, setTyped] = useState("");
  const offers = (body.shape === "trace" ? namesToOffer(names, box.marks) : names).slice(0, 9);
  const first = useRef<HTMLButtonElement & HTMLInputElement>(null);
  useEffect(() => first.current?.focus(), []);
  useFilmAfterwards(box);
  const bind = (owner: string) => box.answer(boundTo(body, owner));
  const accepts = isCanalName(typed.trim());
  const said = saidOfMark(body);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (accepts) bind(typed.trim());
      }}
      onKeyDown={(event) => {
        const writes = event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement;
        const offer = writes ? undefined : offers[Number(event.key) - 1];
        if (offer !== undefined) bind(offer);
        if (event.key === "Escape") box.passOver();
      }}
    >
      <p>{ownerQuestion(body)}</p>
      <div className="asking-offers">
        {offers.map((name, index) => (
          <button key={name} type="button" ref={index === 0 ? first : undefined} onClick={() => bind(name)}>
            {name} <kbd>{index + 1}</kbd>
          </button>
        ))}
      </div>
      {said && <SaidField said={said} change={(value) => box.askAgain({ ...asking, body: said.saying(value) })} />}
      <label>
        <span>{offers.length === 0 ? "Its name" : "Another name"}</span>
        <input
          ref={offers.length === 0 ? first : undefined}
          className="field-line"
          value={typed}
          placeholder={body.shape === "crownRoot" ? "MB" : "MB2"}
          aria-invalid={typed !== "" && !accepts ? true : undefined}
          onChange={(event) => setTyped(event.target.value)}
        />
      </label>
      {typed !== "" && !accepts && <p className="asking-fault">A capital, then letters or digits, as MB2</p>}
      <div className="asking-feet">
        {typed !== "" && (
          <Button type="submit" weight="strong" disabled={!accepts}>
            Name it
          </Button>
        )}
        <Button weight="bare" hint="Escape" onClick={box.passOver}>
          Leave it unnamed
        </Button>
      </div>
    </form>
  );
}

interface SaidFieldOptions {
  readonly said: SaidOfMark;
  readonly change: (value: string) => void;
  /** Own words count only when the field is left. */
  readonly late?: boolean;
}

/** The one other thing that is said of a mark: a list of answers, or a line with offers. */
export function SaidField({ said: { says, value, answers, offers = [] }, change, late = false }: SaidFieldOptions) {
  const id = useId();
  return (
    <div className="said-field">
      <label htmlFor={id}>
        <span>{says}</span>
      </label>
      {answers === undefined ? (
        <SaidInWords {...{ id, value, offers, change, late }} />
      ) : (
        <select id={id} className="field-select" value={value} onChange={({ target }) => change(target.value)}>
          {Object.entries(answers).map(([answer, words]) => (
            <option key={answer} value={answer}>
              {words}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}

interface SaidInWordsOptions extends Required<Pick<SaidFieldOptions, "change" | "late">> {
  readonly id: string;
  readonly value: string;
  readonly offers: readonly string[];
}

function SaidInWords({ id, value, offers, change, late }: SaidInWordsOptions) {
  const [typed, setTyped] = useState(value);
  const write = (text: string) => {
    setTyped(text);
    if (!late) change(text);
  };
  return (
    <>
      <input
        id={id}
        className="field-line"
        value={typed}
        list={`${id}-offers`}
        onChange={({ target }) => write(target.value)}
        onBlur={() => late && typed !== value && change(typed)}
      />
      <datalist id={`${id}-offers`}>
        {offers.map((offer) => (
          <option key={offer} value={offer} />
        ))}
      </datalist>
    </>
  );
}
