/** A name in camelCase as words: `pulpNecrosis` is "pulp necrosis". */
export const inWords = (value: string): string => value.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
