export { defineMethod, type Method, type MethodAbout, type MethodCheck, type MethodInput, type SourceStatus } from "./method.js";
