import { Link } from "wouter";
import { spotTakenOff } from "../../../lightbox/two-view/pairing-gestures.ts";
import type { SharedSpot } from "../../../lightbox/two-view/shared-spots.ts";
import { Button } from "../../../parts/button.tsx";
import { useTwoView } from "./two-view-work.ts";

/** The landmarks that level the films against each other, and those that some film lacks. */
export function LandmarksSection() {
  const { spots, setLandmark } = useTwoView();
  const shared = spots.filter(({ isShared }) => isShared);
  const others = spots.filter(({ isShared }) => !isShared);
  return (
    <section aria-label="Landmarks">
      <h2>Landmarks on all films</h2>
      {shared.length === 0 && (
        <p className="quiet">
          None yet. Two at different heights level the films' scales, three also their turn, and the first says where
          the canal lies.
        </p>
      )}
      <ul className="landmark-list">
        {shared.map((spot) => (
          <Landmark key={spot.what} spot={spot} />
        ))}
      </ul>
      {others.length > 0 && (
        <ul className="landmark-list quiet">
          {others.map((spot) => (
            <li key={spot.what}>{`${spot.what}: ${lackInWords(spot)}`}</li>
          ))}
        </ul>
      )}
      <Button hint="L" onClick={() => setLandmark({ places: {} })}>
        Mark a landmark
      </Button>
    </section>
  );
}

function Landmark({ spot }: { readonly spot: SharedSpot }) {
  const { films, caseId, record } = useTwoView();
  return (
    <li>
      <span className="mark-sign" data-shape="spot" aria-hidden="true" />
      <span>{spot.what}</span>
      <span className="quiet">
        move on{" "}
        {films.map(({ film }, index) => (
          <Link key={film.id} href={`/case/${caseId}/light-box/${film.id}`}>{`film ${index + 1} `}</Link>
        ))}
      </span>
      <button
        type="button"
        className="mark-off"
        aria-label={`Take landmark ${spot.what} off all films`}
        title="Take off all films"
        onClick={() => record(spotTakenOff(spot))}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4 4l8 8M12 4l-8 8" />
        </svg>
      </button>
    </li>
  );
}

function lackInWords({ spots, isDoubled }: SharedSpot): string {
  if (isDoubled) return "marked twice on a film, so it can't serve";
  const lacking = spots.flatMap((spot, index) => (spot === undefined ? [`film ${index + 1}`] : []));
  return `not marked on ${lacking.join(" and ")}`;
}
