import { createContext, type ReactNode, useCallback, useContext, useState } from "react";
import { useGround } from "./ground.ts";
import "./announcer.css";

const Announcing = createContext<(says: string) => void>(() => undefined);

/** Says one sentence to everybody: shown for a moment at the foot of the window, and read out. */
export const useAnnounce = () => useContext(Announcing);

/** Holds the line in which short messages appear. */
export function Announcer({ children }: { readonly children: ReactNode }) {
  const [said, setSaid] = useState({ text: "", count: 0 });
  const ground = useGround();
  const announce = useCallback((text: string) => setSaid(({ count }) => ({ text, count: count + 1 })), []);
  return (
    <Announcing.Provider value={announce}>
      {children}
      <div className="announcer" role="status" aria-live="polite">
        {said.text !== "" && (
          <p key={said.count} className="announcer-line" data-room={ground}>
            {said.text}
          </p>
        )}
      </div>
    </Announcing.Provider>
  );
}
