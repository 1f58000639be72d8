import type { EmergencySettings } from "../../../record/clinic-rules.ts";

interface CallFirstOptions {
  /** As far as the clinic's settings are known. */
  readonly clinic: EmergencySettings | undefined;
  /** The settings could not be read: the server does not answer. */
  readonly unread: boolean;
  readonly toSettings?: (() => void) | undefined;
}

/** Whom to call, the first one first and largest; where nobody has written a number, that is said. */
export function CallFirst({ clinic, unread, toSettings }: CallFirstOptions) {
  const [first, ...others] = clinic?.calls ?? [];
  return (
    <section className="emergency-calls" aria-label="Whom to call">
      <h2>Call first</h2>
      {first === undefined ? (
        <p className="emergency-number">Your local emergency number</p>
      ) : (
        <p>
          <Called {...first} />
        </p>
      )}
      {first === undefined && <NoNumbers {...{ unread, toSettings }} />}
      {others.length > 0 && (
        <ul>
          {others.map((one) => (
            <li key={one.who + one.number}>
              <Called {...one} />
            </li>
          ))}
        </ul>
      )}
      <h2>Kit and oxygen</h2>
      <p className="emergency-kit">{clinic?.kit || "Where they are is not written in the settings."}</p>
    </section>
  );
}

const Called = ({ who, number }: EmergencySettings["calls"][number]) => (
  <>
    <span className="emergency-who">{who}</span> <span className="emergency-number">{number}</span>
  </>
);

function NoNumbers({ unread, toSettings }: Pick<CallFirstOptions, "unread" | "toSettings">) {
  if (unread) return <p className="emergency-quiet">The clinic's own numbers can't be read now.</p>;
  return (
    <p className="emergency-quiet">
      Nobody has written the clinic's numbers yet.{" "}
      {toSettings && (
        <button type="button" className="button" onClick={toSettings}>
          Write them in the settings
        </button>
      )}
    </p>
  );
}
