import { Link } from "wouter";
import { PageHead } from "../../parts/page-head.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useSession } from "../../record/readings.ts";
import "./settings-room.css";

/** What Canalog is, what it is not, and what it keeps where. */
export function AboutRoom() {
  useTitle("About");
  const session = useSession();
  return (
    <>
      <PageHead>
        <h1 className="settings-title">About</h1>
      </PageHead>
      <main className="settings-page">
        <article className="about-page">
          <p>
            Canalog is the bench where a resident in endodontics builds the account of a treated tooth while the
            treatment happens.
          </p>
          <h2>What it is not</h2>
          <p className="look">
            It supports, and never replaces, licensed judgement, product labelling and local rules. A number is only as
            good as the marks and the assumptions that it rests on; each opens to both.
          </p>
          <h2>How to read a number</h2>
          <ul>
            <li>An interval beside a number is meant to hold the truth in 95 of 100 such measurements.</li>
            <li>A source marked ● was read in a copy; one marked ○ is cited from memory and waits to be checked.</li>
            <li>A sum that can't be done says why, and what would make it possible.</li>
            <li>
              Every computation has its <Link href="/methods">method page</Link>.
            </li>
          </ul>
          <h2>Where things are</h2>
          <p>
            Everything stays on this machine. Patients are pseudonyms, a year of birth and a sex; please write no names
            into free text. Each change stays on record with who made it and when.
          </p>
          {session.data && (
            <p className="quiet settings-where">
              Version {session.data.version} · record in {session.data.home}
            </p>
          )}
          <p className="quiet">
            Press <strong>?</strong> in any room for the keys that work there. The typeface is Inter, under the SIL Open
            Font License.
          </p>
        </article>
      </main>
    </>
  );
}
