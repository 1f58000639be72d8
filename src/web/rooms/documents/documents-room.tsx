/** Not written yet. */
export const DocumentsRoom = ({ caseId }: { readonly caseId: string }) => <main>{caseId}</main>;
