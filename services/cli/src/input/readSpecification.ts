import { parseSpecification } from '@tiegel/contract/terms';
import { readJson } from './readJson.ts';

/**
 * The JSON of a specification's file, unchecked but for keys that stand twice; '-' for standard input.
 * @throws ProblemError request/key-twice and those of readJson
 */
export const readSpecification = (file: string): unknown => readJson(file, parseSpecification);
