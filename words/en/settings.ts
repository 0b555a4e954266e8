/** Words of the settings of one device. */
export const settingsSentences = {
  "settings-hands": "Hands",
  "settings-bare": "Bare",
  "settings-bare-long": "keys as large as a thumb",
  "settings-gloves": "Gloves",
  "settings-gloves-long": "larger keys and buttons",
  "settings-keys": "Numbers are typed on",
  "settings-keys-own": "The keypad of this app",
  "settings-keys-device": "The keyboard of this device",
  "settings-name-hint": "It stands beside what is written on this device.",
  "settings-name-now": "Now: {name}. A name can be changed; what was written stays.",
  "settings-name-missing": "Type a name first.",
  "settings-name-kept": "Kept on this device: {name}",
  "settings-keep-name": "Keep the name",
} as const;
