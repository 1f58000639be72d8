import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useLocation } from "wouter";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Button } from "../../parts/button.tsx";
import { ask, type Refused } from "../../record/api.ts";
import { caseKey } from "../../record/case-access.tsx";

/** Takes a whole case out of the record; asks once more, because this one can't be undone. */
export function RemoveCase({ caseId }: { readonly caseId: string }) {
  const [sure, setSure] = useState(false);
  const client = useQueryClient();
  const announce = useAnnounce();
  const [, go] = useLocation();
  const remove = useMutation<unknown, Refused>({
    mutationFn: () => ask(`/cases/${caseId}`, { method: "DELETE" }),
    onSuccess: () => {
      announce("The case is removed");
      go("/");
      client.removeQueries({ queryKey: caseKey(caseId) });
      void client.invalidateQueries({ queryKey: ["cases"] });
    },
    onError: (error) => announce(error.message),
  });
  return (
    <footer className="moment-foot">
      {sure ? (
        <>
          <span>
            Remove the whole case with its films and its history? Only a mark stays that it was there, when it went and
            by whom. This can't be undone.
          </span>
          <Button weight="look" disabled={remove.isPending} onClick={() => remove.mutate()}>
            Remove the case
          </Button>
          <Button onClick={() => setSure(false)}>Keep it</Button>
        </>
      ) : (
        <Button weight="bare" onClick={() => setSure(true)}>
          Remove this case
        </Button>
      )}
    </footer>
  );
}
