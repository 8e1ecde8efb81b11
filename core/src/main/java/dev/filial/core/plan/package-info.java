/**
 * Which cross next: which plants to cross with which, over one season or several, to come to a
 * seedling that is wanted, and how many seeds each season takes.
 *
 * <p>Takes what candidates carry ({@link dev.filial.core.plan.Candidate}), how they are related
 * ({@link dev.filial.core.plan.Relations}) and the genes ({@link dev.filial.core.plan.PlanGenes}),
 * not a register: {@link dev.filial.core.plan.PlanSearch} finds the ways by the mean odds, {@link
 * dev.filial.core.plan.PlanChances} reckons one of them with all that is uncertain, and {@link
 * dev.filial.core.plan.Sowing} says how many seeds it takes. May import {@code number}, {@code
 * name}, {@code pedigree}, {@code heredity}, {@code trial}, {@code ancestry} and {@code inference}.
 */
package dev.filial.core.plan;
