/** Small programs that embed the library; the build compiles and runs them. */
package dev.filial.examples;
