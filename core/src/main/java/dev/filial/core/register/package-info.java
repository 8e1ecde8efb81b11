/**
 * The register: a book of numbered entries, what each may say, the rules that accept or refuse it,
 * and what is true once all of them have been read.
 *
 * <p>An entry is a {@link dev.filial.core.register.Statement} with a number, a time and a writer.
 * It is never changed; a later {@link dev.filial.core.register.Amended} entry replaces or strikes
 * what it says. What is true of one plant is a fold over the statements made about that plant, so
 * nothing here needs the whole book in memory: rules and derivations read a {@link
 * dev.filial.core.register.RegisterView}, which the in-memory {@link
 * dev.filial.core.register.Register} and the store on disk both implement.
 *
 * <p>May import {@code number}, {@code name}, {@code pedigree}, {@code heredity}, {@code trial},
 * {@code ancestry} and {@code inference}; nothing of {@code store}, {@code exchange} or {@code
 * answer}.
 */
package dev.filial.core.register;
