import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Button } from "../../parts/button.tsx";
import { DemoMark } from "../../parts/demo-mark.tsx";
import { Dialog } from "../../parts/dialog.tsx";
import { ask, type Refused } from "../../record/api.ts";
import { useSession } from "../../record/readings.ts";

/** What stands of the demo, and the one press that takes it away or brings it back. */
export function DemoLine() {
  const session = useSession();
  const client = useQueryClient();
  const announce = useAnnounce();
  const [asking, setAsking] = useState(false);
  const change = useMutation<unknown, Refused, "POST" | "DELETE">({
    mutationFn: (method) => ask("/demo", { method }),
    onSuccess: (_, method) => announce(method === "DELETE" ? "The demo is removed" : "The demo is loaded"),
    onError: (error) => announce(error.message),
    onSettled: () => {
      setAsking(false);
      void client.invalidateQueries();
    },
  });
  const demo = session.data?.demo;
  if (demo === undefined) return null;
  if (demo === "loading" || change.isPending) return <p className="demo-line">The demo is being made ready.</p>;
  return (
    <footer className="demo-line">
      {demo === "loaded" ? (
        <>
          <DemoMark />
          <span>The cases so marked were made up to show what Canalog does.</span>
          <Button weight="bare" onClick={() => setAsking(true)}>
            Remove the demo
          </Button>
        </>
      ) : (
        <Button weight="bare" onClick={() => change.mutate("POST")}>
          Load the demo: invented cases
        </Button>
      )}
      {asking && (
        <Dialog title="Remove the demo?" close={() => setAsking(false)}>
          <p>All invented cases go, with everything that was changed in them. Your own cases stay as they are.</p>
          <div className="dialog-feet">
            <Button weight="look" onClick={() => change.mutate("DELETE")}>
              Remove the demo
            </Button>
            <Button onClick={() => setAsking(false)}>Keep it</Button>
          </div>
        </Dialog>
      )}
    </footer>
  );
}
