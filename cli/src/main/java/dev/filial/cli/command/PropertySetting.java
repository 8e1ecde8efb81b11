package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.register.RegisterRefusal;

/**
 * One property of an entry and what it is to be.
 *
 * @param name the property
 * @param value the value, empty to take it away
 */
record PropertySetting(String name, String value) {

  static final Reading<PropertySetting> READING =
      (text, bench) -> {
        int equals = text.indexOf('=');
        if (equals < 1) {
          throw new IllegalArgumentException(
              "\"" + text + "\" says nothing to put right; write it as date=\"4 mar\"");
        }
        return new PropertySetting(text.substring(0, equals), text.substring(equals + 1));
      };

  /** A plant named as anywhere else, or a code that nothing has yet. */
  static Code code(String text, Writing writing) {
    try {
      return writing.find(text).code();
    } catch (RegisterRefusal notThere) {
      try {
        return Code.parse(text);
      } catch (CodeException e) {
        throw notThere;
      }
    }
  }
}
