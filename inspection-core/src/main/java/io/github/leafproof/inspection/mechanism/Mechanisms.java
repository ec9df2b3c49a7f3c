package io.github.leafproof.inspection.mechanism;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every calculation there is. */
public final class Mechanisms {
    /** The calculations on one subject. */
    public record Subject(String title, List<Mechanism> mechanisms) {
        public Subject {
            mechanisms = List.copyOf(mechanisms);
        }
    }

    /**
     * The subjects, in the order of the job, with the names of their calculations. A subject is made when one of these is
     * asked for: every command would wait for all of them, and most procedures ask for few.
     */
    private enum Topic {
        CRANK_AND_SLIDER("Crank and slider", """
                piston_travel crank_angle_at piston_speed piston_acceleration mean_piston_speed top_by_stop \
                dwell_angle dial_angle_error"""),
        CYLINDER("Cylinder", """
                displacement_of displacement_difference compression_ratio_of chamber_of ratio_with_gasket \
                trapped_stroke effective_ratio oil_dose cranking_pressure gas_force"""),
        VALVE_GEAR("Valve gear", """
                lobe_lift event_shift open_duration wrong_stroke_lash lash_arc_before_top lash_arc_after_top \
                tooth_angle teeth_out lever_found locking_shift cocked_leaf_gap lash_at_stem"""),
        HEAT("Heat", """
                thermal_growth push_rod_lash_change valve_lash_change cooling_time cooling_constant excess_left"""),
        TIGHTNESS("Tightness", """
                leak_down leak_orifice orifice_flow decay_leak decay_by_drift hold_time"""),
        FITS_AND_THREADS("Fits and threads", """
                tolerance_grade big_end_play ring_gap_hot bore_wear hot_clearance thread_misfit turns_to_jam"""),
        CARBURETTOR("Carburettor", """
                circle_overlap throttle_area_by_pin throttle_share_by_pin throttle_area_by_angle pin_for_area \
                stop_screw_turns datum_turns datum_shift needle_disagreement needle_area turns_for_flow \
                mixture_shift turns_for_weather"""),
        FUEL_PATH("Fuel path", """
                leak_rate line_volume prime_strokes intake_strokes fuel_head flow_with_head nose_up_head tank_swing"""),
        FUEL("Fuel", """
                oil_to_add share_after_adding blend_share blend_part mass_share volume_share blend_density \
                stoichiometric_air air_demand fuel_flow_ratio tank_time fuel_needed"""),
        AIR("Air", """
                standard_temperature standard_pressure standard_density density_altitude pressure_altitude \
                air_density_of dry_air_density vapour_pressure speed_of_sound"""),
        PROPELLER("Propeller", """
                propeller_load_ratio speed_on_propeller propeller_power propeller_thrust shaft_torque power_at_speed \
                specific_power tip_speed tip_mach highest_propeller_speed hub_clamp nut_torque clamp_of_nut \
                hub_pressure tip_track"""),
        RUNNING_IN_AND_TUNING("Running in and tuning", """
                peak_turns peak_speed flight_turns lamp_reading true_speed exhaust_note speed_of_note \
                true_temperature emissivity_by_patch wear_rate next_check plan_time plan_fuel""");

        private final String title;
        private final String names;

        Topic(String title, String names) {
            this.title = title;
            this.names = names;
        }

        List<String> names() {
            return List.of(names.split(" ", -1));
        }

        List<Mechanism> mechanisms() {
            return switch (this) {
                case CRANK_AND_SLIDER -> CrankSlider.ALL;
                case CYLINDER -> Cylinder.ALL;
                case VALVE_GEAR -> ValveGear.ALL;
                case HEAT -> Thermal.ALL;
                case TIGHTNESS -> Tightness.ALL;
                case FITS_AND_THREADS -> Fits.ALL;
                case CARBURETTOR -> Carburettor.ALL;
                case FUEL_PATH -> FuelPath.ALL;
                case FUEL -> FuelMix.ALL;
                case AIR -> Air.ALL;
                case PROPELLER -> Propeller.ALL;
                case RUNNING_IN_AND_TUNING -> Tuning.ALL;
            };
        }
    }

    private static final List<Topic> TOPICS = List.of(Topic.values());
    private static final Map<String, Topic> OF_NAMES = ofNames();

    private static Map<String, Topic> ofNames() {
        Map<String, Topic> topics = new HashMap<>();
        TOPICS.forEach(topic -> topic.names().forEach(name -> topics.put(name, topic)));
        return Map.copyOf(topics);
    }

    private Mechanisms() {}

    /** By subject, in the order of the job. */
    public static List<Subject> subjects() {
        return TOPICS.stream()
                .map(topic -> new Subject(topic.title, topic.mechanisms()))
                .toList();
    }

    /** All of them, subject by subject. */
    public static List<Mechanism> all() {
        return TOPICS.stream().flatMap(topic -> topic.mechanisms().stream()).toList();
    }

    /** What all of them are called, in the same order; makes none of them. */
    public static List<String> names() {
        return TOPICS.stream().flatMap(topic -> topic.names().stream()).toList();
    }

    /** The one of this name. */
    public static Optional<Mechanism> named(String name) {
        return Optional.ofNullable(OF_NAMES.get(name))
                .flatMap(topic -> topic.mechanisms().stream()
                        .filter(mechanism -> mechanism.name().equals(name))
                        .findFirst());
    }
}
