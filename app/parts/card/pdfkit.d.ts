/** What of the PDF library is used is said by the card; the library ships no types. */
declare module "pdfkit" {
  const Document: import("@ringwright/card").PdfConstructor;
  export default Document;
}
