/** Not written yet. */
export const MethodsRoom = ({ topic }: { readonly topic: string }) => <main>{topic}</main>;
