/** The part of Eleventy 3.1 that the plugin uses; the package brings no types of its own. */
declare module "@11ty/eleventy" {
  export interface EleventyConfig {
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    setQuietMode(quiet: boolean): void;
    readonly benchmarkManager: { get(group: "Configuration"): { setIsVerbose(isVerbose: boolean): void } };
    addTemplate(virtualPath: string, template: unknown): void;
    on(event: "eleventy.before" | "eleventy.after", handler: (event: { readonly directories: { readonly output: string } }) => void | Promise<void>): void;
  }

  export interface EleventyOptions {
    readonly configPath: string | false;
    readonly loader: "esm" | "cjs" | "auto";
    readonly quietMode: boolean;
    readonly config: (config: EleventyConfig) => void;
  }

  export default class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions);
    init(): Promise<void>;
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
