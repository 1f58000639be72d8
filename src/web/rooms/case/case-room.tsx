/** Not written yet. */
export const CaseRoom = ({ caseId, moment }: { readonly caseId: string; readonly moment: string }) => (
  <main>
    {caseId} {moment}
  </main>
);
