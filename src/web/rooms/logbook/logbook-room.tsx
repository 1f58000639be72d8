/** Not written yet. */
export const LogbookRoom = () => <main></main>;
