import { CommandType } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/preset-sheets-core';
import type { OpenedSheet } from './openSheet.js';

const moves = /^sheet\.mutation\.(?:insert|remove|move|delete)-/;

/** Whether a person changed cells since the file was opened or last saved; a formula that is computed again is not an edit. */
export class UnsavedEdits {
  private areThere = false;

  constructor({ api }: OpenedSheet) {
    api.addEvent(api.Event.CommandExecuted, ({ id, type, params }) => {
      if (type !== CommandType.MUTATION) return;
      const trigger = (params as { trigger?: string } | undefined)?.trigger;
      const isTyped = id === SetRangeValuesMutation.id && trigger !== undefined && !/style|border/.test(trigger);
      if (isTyped || moves.test(id)) this.areThere = true;
    });
  }

  saved(): void {
    this.areThere = false;
  }

  exist(): boolean {
    return this.areThere;
  }
}
