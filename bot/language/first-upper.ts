// Half a line as a sentence of its own begins.

export const firstUpper = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
