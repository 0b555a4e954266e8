/** Words round a number that is being typed. */
export const quantitySentences = {
  "quantity-keypad": "Keypad",
  "quantity-rub-out": "Rub out",
  "quantity-space": "space",
  "quantity-minus": "minus",
  "quantity-other-unit": "Other unit",
  "quantity-unit": "{unit}. Tap for {other}.",
} as const;
