/** What the kernel needs of WebAssembly, which every runtime has but this project's types do not name. */
interface WebAssemblyHere {
  Module: new (bytes: Uint8Array<ArrayBuffer>) => object;
  Memory: new (pages: { initial: number }) => { buffer: ArrayBuffer };
  Instance: new (
    module: object,
    imports: Record<string, Record<string, unknown>>,
  ) => {
    exports: Record<string, () => void>;
  };
}

export const { WebAssembly: webAssembly } = globalThis as unknown as { WebAssembly: WebAssemblyHere };
