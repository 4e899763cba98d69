package studio.stancebook.underlay.web;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What {@link OrderForm} reads, for the description of the API. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Parameter(
        name = "segment",
        in = ParameterIn.QUERY,
        description = "Key of a segment; this or a proposal.",
        schema = @Schema(type = "string"))
@Parameter(
        name = "proposal",
        in = ParameterIn.QUERY,
        description = "Number of a proposal; its newest revision is drawn.",
        schema = @Schema(type = "integer", format = "int64", minimum = "1"))
@Parameter(
        name = "tyre",
        in = ParameterIn.QUERY,
        description = "Size of both tyres.",
        example = "265/70R17",
        schema = @Schema(type = "string"))
@Parameter(
        name = "wheelbase",
        in = ParameterIn.QUERY,
        description = "Wheelbase, mm.",
        schema = @Schema(type = "number", minimum = "1000", maximum = "6000"))
@Parameter(
        name = "paper",
        in = ParameterIn.QUERY,
        description = "Size of the paper, laid across; A3 where nothing is said.",
        schema =
                @Schema(
                        type = "string",
                        allowableValues = {"a4", "a3", "a2", "a1", "a0"}))
@Parameter(
        name = "scale",
        in = ParameterIn.QUERY,
        description = "1 to what; as large as fits where nothing is said.",
        schema =
                @Schema(
                        type = "string",
                        allowableValues = {"fit", "1", "2", "4", "5", "8", "10", "20", "40"}))
@Parameter(
        name = "outline",
        in = ParameterIn.QUERY,
        description = "Whether the proposal's own lines are laid over, as a layer; a proposal at its own size only.",
        schema =
                @Schema(
                        type = "string",
                        allowableValues = {"true"}))
@Parameter(
        name = "title",
        in = ParameterIn.QUERY,
        description = "Title of the sheet.",
        schema = @Schema(type = "string", maxLength = 80))
@Parameter(
        name = "at.wheelbase-in-wheels",
        in = ParameterIn.QUERY,
        description = "Point of the band of a measure, 0 at its lower edge, 100 at its upper one; every measure of the "
                + "sheet has such a parameter, at. and its key.",
        schema = @Schema(type = "number", minimum = "0", maximum = "100"))
@interface SheetParameters {}
