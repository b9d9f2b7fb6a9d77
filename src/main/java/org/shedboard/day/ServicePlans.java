package org.shedboard.day;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shedboard.estimate.Catalogue;
import org.shedboard.estimate.MachineClass;
import org.shedboard.estimate.Work;
import org.shedboard.register.ServicePlan;
import org.shedboard.shop.ServiceInterval;

/** The services of the catalogue that come again. */
final class ServicePlans {
    private ServicePlans() {}

    /** By the id of the machine class. */
    static Map<String, ServicePlan> of(Catalogue catalogue) {
        Map<String, ServicePlan> plans = new HashMap<>();
        for (MachineClass each : catalogue.classes()) {
            Map<String, ServiceInterval> services = new LinkedHashMap<>();
            for (Work work : catalogue.worksFor(each.id())) {
                work.interval().ifPresent(interval -> services.put(work.id(), interval));
            }
            plans.put(each.id(), new ServicePlan(services));
        }
        return plans;
    }
}
