import { Link } from "wouter";
import { useTwoView } from "./two-view-work.ts";

/** The place of the film that is not there yet. */
export function OneFilmMore() {
  const { caseId, canal } = useTwoView();
  return (
    <section className="one-film-more" aria-label="Second film">
      <h2>{canal} is traced on one film</h2>
      <p>
        Trace it on a second film of this tooth, taken with the tube shifted to the side: what one film hides then
        stands here. Which shift serves is worked out at the side.
      </p>
      <Link href={`/case/${caseId}/light-box`} className="button button-strong">
        To the films
      </Link>
    </section>
  );
}
