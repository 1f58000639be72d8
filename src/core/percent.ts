/** A share in whole percent: 0.873 is "87 %". */
export const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;
