/** What a relation is about, in the order the methods are told. */
export const methodSubjects = [
  "gravity", "brewhouse", "alcohol", "bitterness", "color", "dry hop", "log", "cooling", "carbonation", "oxygen", "balance",
] as const;

export type MethodSubject = (typeof methodSubjects)[number];
