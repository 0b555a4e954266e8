/** Words round a number that is being typed. */
export const quantitySentences = {
  "quantity-keypad": "Keypad",
  "quantity-rub-out": "Rub out",
  "quantity-space": "space",
  "quantity-minus": "minus",
  "quantity-other-unit": "{unit}: change the unit",
  "quantity-unit": "{unit}: change to {other}",
} as const;
