/** The little of dcmjs that a test reads DICOM files with. */
declare module "dcmjs" {
  interface NaturalDataset {
    readonly SOPClassUID: string;
    readonly Rows: number;
    readonly Columns: number;
    readonly BitsStored: number;
    readonly HighBit: number;
    readonly PhotometricInterpretation: string;
    readonly ImagerPixelSpacing?: readonly number[];
    readonly EstimatedRadiographicMagnificationFactor?: number;
    readonly PixelData: readonly ArrayBuffer[];
  }
  const dcmjs: {
    readonly data: {
      readonly DicomMessage: { readFile(bytes: ArrayBuffer): { readonly dict: unknown } };
      readonly DicomMetaDictionary: { naturalizeDataset(dict: unknown): NaturalDataset };
    };
  };
  export default dcmjs;
}
