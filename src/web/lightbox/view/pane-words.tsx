import { dayName, purposeName } from "../kernels/film-name.ts";
import { tubeFromInWords } from "../kernels/strip-days.ts";
import type { LightBox } from "./light-box.ts";

/** Which film lies in a pane, where several lie side by side; the one in hand carries a full mark. */
export function PaneWords({ box, pane }: { readonly box: LightBox; readonly pane: number }) {
  const { film, presentedOn, isInHand } = box;
  const from = tubeFromInWords(film);
  const isSaid = from === "" || (film.body.purpose === "diagnostic" && from === "straight");
  const words = [dayName(presentedOn, film.body.takenOn), purposeName(film.body.purpose), ...(isSaid ? [] : [from])];
  return (
    <p className="pane-words">
      <svg viewBox="0 0 10 10" aria-hidden="true">
        <path d={isInHand ? "M1 1h8v8H1z" : "M1.500 1.500h7v7h-7z"} data-full={isInHand} />
      </svg>
      <b>{pane + 1}</b> {words.join(" · ")}
    </p>
  );
}
