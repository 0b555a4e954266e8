/** Printing the card from a device. */
export const printSentences = {
  "print-card": "Print the card",
  "print-card-long": "The whole plan with room to write, for a box where no device may go.",
  "print-paper": "Paper",
  "print-a4": "A4",
  "print-letter": "Letter",
  "print-make": "Make the card",
  "print-making": "Drawing the card on this device.",
  "print-ready": "The card is ready, and written into the logbook.",
  "print-open": "Open it to print",
  "print-save": "Save it",
  "print-failed": "The card could not be made: {typed}",
} as const;
